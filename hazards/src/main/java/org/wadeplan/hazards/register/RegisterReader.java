package org.wadeplan.hazards.register;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads a register file into rows, going on after a fault so that all faults are reported at once. */
final class RegisterReader {

    private static final int FORMAT = 1;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private RegisterReader() {}

    static Checked<HazardRegister> read(String file, byte[] bytes) {
        JsonNode root;
        try {
            root = JSON.readTree(bytes);
        } catch (JsonProcessingException fault) {
            return Checked.failed(notJson(file, fault));
        } catch (IOException failure) {
            throw new IllegalStateException("Reading from memory cannot fail", failure);
        }
        Fields fields = Fields.of(file, root);
        fields.only(Set.of("format", "version", "title", "note", "source", "hazards"));
        checkFormat(fields);
        String version = fields.text("version");
        String title = fields.text("title");
        String source = fields.text("source");
        List<Hazard> rows = rows(fields);
        HazardRegister register = new HazardRegister(version, title, source, rows);
        return fields.problems().isEmpty()
                ? Checked.of(register)
                : new Checked<>(Optional.of(register), fields.problems());
    }

    private static List<Hazard> rows(Fields file) {
        List<Hazard> rows = new ArrayList<>();
        Set<String> ids = new TreeSet<>();
        for (Fields row : file.children("hazards", "id")) {
            Optional<Hazard> hazard = HazardRow.read(row);
            hazard.ifPresent(rows::add);
            String id = row.peek("id");
            if (!id.isBlank() && !ids.add(id)) {
                row.error("register-duplicate-id", "id", "\"" + id + "\" stands twice", "each id once", "rename one");
            }
        }
        if (rows.isEmpty()) {
            file.error("register-empty", "hazards", "no usable row", "at least one hazard", "add rows");
        }
        return rows;
    }

    private static void checkFormat(Fields fields) {
        OptionalInt format = fields.wholeNumber("format", 1, Integer.MAX_VALUE);
        if (format.isPresent() && format.getAsInt() != FORMAT) {
            fields.error(
                    "register-format",
                    "format",
                    "format " + format.getAsInt(),
                    "format " + FORMAT,
                    "write the file in format " + FORMAT);
        }
    }

    private static Problem notJson(String file, JsonProcessingException fault) {
        int line = fault.getLocation() == null
                ? 1
                : Math.max(1, fault.getLocation().getLineNr());
        return Problem.error(
                "register-not-json",
                SourcePlace.line(file, line),
                fault.getOriginalMessage(),
                "JSON",
                "repair the text at this line, or begin again from the shipped register");
    }
}
