package org.wadeplan.planner.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.network.AcceptedRepairs;
import org.wadeplan.geo.network.CatchmentCheck;
import org.wadeplan.geo.network.StreamHints;
import org.wadeplan.geo.network.StreamRules;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.hazards.register.HazardRegister;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.DecisionTableReader;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.Terrain;
import org.wadeplan.planner.round.Water;

/**
 * Step 1: reads a round folder, checks everything and reports every problem at once.
 *
 * <p>Never writes, and never opens a private file. See {@link #read(Path)} for what comes back; {@code InputHasher} says
 * which files the round's fingerprint covers.
 */
public final class RoundReader {

    private RoundReader() {}

    /**
     * Reads a folder; only repairs that its {@code round.json} accepts are made.
     *
     * @return the round with every problem of every file. There is a value even beside errors, as long as the header, the
     *     stream lines and the decision table could be read; rows that could not are missing from it, so nothing may be
     *     planned with it while {@link Checked#hasErrors()}
     */
    public static Checked<Round> read(Path folder) {
        return read(folder, Set.of());
    }

    /**
     * Reads a folder, with repairs to stream lines accepted for this once.
     *
     * @param acceptedRepairs names of repairs, as problems about them give them
     */
    public static Checked<Round> read(Path folder, Set<String> acceptedRepairs) {
        Optional<Problem> noFolder = refusal(folder);
        return noFolder.isPresent() ? Checked.failed(noFolder.get()) : readFolder(folder, acceptedRepairs);
    }

    private static Optional<Problem> refusal(Path folder) {
        String found = !Files.exists(folder)
                ? "there is nothing of that name"
                : !Files.isDirectory(folder)
                        ? "this is a file"
                        : !Files.isReadable(folder) || !Files.isExecutable(folder)
                                ? "the folder may not be opened"
                                : "";
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(Problem.error(
                        "no-round-folder",
                        SourcePlace.file(folder.toString().isEmpty() ? "." : folder.toString()),
                        found,
                        "a round folder: one that holds round.json",
                        "check the path"));
    }

    private static Checked<Round> readFolder(Path folder, Set<String> acceptedRepairs) {
        Checked<RoundJson> json = RoundJson.read(folder);
        RoundFolder files = json.value()
                .map(read -> new RoundFolder(folder, read.files(), read.layers()))
                .orElseGet(() -> new RoundFolder(folder, Map.of()));
        Optional<RoundHeader> header = json.value().flatMap(RoundJson::header);
        RoundTables tables = RoundTables.read(files);
        Checked<DecisionTable> decisions = decisionTable(files);
        Checked<Terrain> terrain = terrain(files, header, tables, acceptedRepairs);
        Checked<HazardRegister> register = register(files);

        List<Problem> problems = new ArrayList<>(json.problems());
        problems.addAll(tables.problems());
        problems.addAll(decisions.problems());
        problems.addAll(terrain.problems());
        problems.addAll(register.problems());
        problems.addAll(References.check(tables, header, decisions, terrain.value()));
        problems.addAll(HazardIds.check(tables.siteHazards(), register.value()));
        Optional<RoundAssembly> assembly = header.flatMap(
                head -> decisions.value().flatMap(decided -> terrain.value().flatMap(ground -> register.value()
                        .map(hazards -> new RoundAssembly(folder, head, tables, decided, ground, hazards)))));
        return assembly.map(whole -> InputHasher.of(files).map(whole::round).with(problems))
                .orElseGet(() -> Checked.failed(SuitableSystem.suggested(problems, files)));
    }

    private static Checked<HazardRegister> register(RoundFolder files) {
        if (!files.has(RoundFolder.HAZARDS)) {
            return Checked.of(HazardRegister.shipped());
        }
        Path file = files.path(RoundFolder.HAZARDS);
        return FileLimit.TEXT
                .refusal(file, files.nameOf(RoundFolder.HAZARDS))
                .<Checked<HazardRegister>>map(Checked::failed)
                .orElseGet(() -> HazardRegister.read(file));
    }

    private static Checked<DecisionTable> decisionTable(RoundFolder files) {
        Path file = files.path(RoundFolder.METHOD_TABLE);
        String name = files.nameOf(RoundFolder.METHOD_TABLE);
        return FileLimit.TEXT
                .refusal(file, name)
                .<Checked<DecisionTable>>map(Checked::failed)
                .orElseGet(() -> DecisionTableReader.read(file, name));
    }

    /** Without a header nothing says which coordinate system the round is in, so the layers cannot be judged. */
    private static Checked<Terrain> terrain(
            RoundFolder files, Optional<RoundHeader> header, RoundTables tables, Set<String> acceptedRepairs) {
        if (header.isEmpty()) {
            return Checked.failed(List.of());
        }
        return CoordinateSystem.named(header.get().crs(), SourcePlace.part(RoundJson.FILE, "crs"))
                .then(crs -> new TerrainReader(files, crs, repairs(header.get(), acceptedRepairs), rules(header.get()))
                        .read(tables.barriers().values(), hints(header.get(), tables)))
                .then(ground -> Checked.of(ground, catchments(ground, files)));
    }

    private static List<Problem> catchments(Terrain ground, RoundFolder files) {
        Map<String, Geometry> outlines = new TreeMap<>();
        ground.catchments().forEach(catchment -> outlines.put(catchment.code(), catchment.area()));
        return CatchmentCheck.of(ground.network(), outlines, SourcePlace.file(files.nameOf(RoundFolder.STREAMS)));
    }

    private static StreamRules rules(RoundHeader header) {
        return StreamRules.USUAL.withSnapToleranceM(header.snapToleranceM());
    }

    private static AcceptedRepairs repairs(RoundHeader header, Set<String> acceptedNow) {
        Set<String> ids = new TreeSet<>(header.acceptedRepairs());
        ids.addAll(acceptedNow);
        return new AcceptedRepairs(ids);
    }

    /** A stream that is one water from end to end has that water's name. */
    private static StreamHints hints(RoundHeader header, RoundTables tables) {
        Map<String, String> names = new TreeMap<>();
        Set<String> inSeveral = new TreeSet<>();
        for (Water water : tables.waters().values()) {
            if (names.put(water.stream(), water.name()) != null) {
                inSeveral.add(water.stream());
            }
        }
        names.keySet().removeAll(inSeveral);
        return new StreamHints(header.mouths(), names);
    }
}
