package org.wadeplan.hazards.register;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * A table of hazards that an authority stands behind.
 *
 * @param version of the whole table; printed in the pack
 * @param title what the table is
 * @param source who wrote it
 * @param hazards rows in the order of the file, ids unique
 */
public record HazardRegister(String version, String title, String source, List<Hazard> hazards) {

    private static final String SHIPPED = "hazards.json";

    public HazardRegister {
        hazards = List.copyOf(hazards);
    }

    /** The register that comes with the program. */
    public static HazardRegister shipped() {
        try (InputStream file = HazardRegister.class.getResourceAsStream(SHIPPED)) {
            if (file == null) {
                throw new IllegalStateException(SHIPPED + " is missing from the program");
            }
            Checked<HazardRegister> read = RegisterReader.read(SHIPPED, file.readAllBytes());
            if (read.hasErrors()) {
                throw new IllegalStateException("The shipped register is broken: " + read.problems());
            }
            return read.value().orElseThrow();
        } catch (IOException failure) {
            throw new IllegalStateException("The shipped register cannot be read", failure);
        }
    }

    /**
     * A register in the same form as the shipped one, with every problem of the file at once.
     *
     * <p>A row names its {@code id}, {@code version}, {@code title}, {@code consequence} and {@code likelihood} (1 to 5),
     * {@code when} (a list of lines, each a list of conditions: an {@code activity}, a {@code feature}, or an
     * {@code attribute} with {@code comparison} and {@code value}; the last two with {@code whenUnknown}: {@code counts}
     * or {@code ask}), {@code controls} ({@code level}, {@code owner}, {@code text}), {@code sign} and {@code source}; and
     * where it has any {@code raisedBy}, {@code stops} ({@code say}, {@code limit}, {@code source}) and {@code ask}.
     */
    public static Checked<HazardRegister> read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            return RegisterReader.read(name, Files.readAllBytes(file));
        } catch (IOException failure) {
            return Checked.failed(Problem.error(
                    "register-unreadable",
                    SourcePlace.file(name),
                    "the file cannot be read",
                    "a readable JSON file",
                    "check that it exists and that you may open it"));
        }
    }

    public Optional<Hazard> hazard(String id) {
        return hazards.stream().filter(row -> row.id().equals(id)).findFirst();
    }
}
