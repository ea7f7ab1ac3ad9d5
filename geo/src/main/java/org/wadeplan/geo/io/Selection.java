package org.wadeplan.geo.io;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Takes features as a file has them and hands on those asked for: filtered, renamed, in the round's system. */
final class Selection implements FeatureSink {

    private final LayerQuery query;
    private final SourcePlace file;
    private final CoordinateSystem round;
    private final boolean movedAlready;
    private final Consumer<Feature> sink;
    private final Findings findings;

    private Optional<AttributeFilter> filter = Optional.empty();
    private Optional<IntoRound> into = Optional.empty();
    private Optional<LayerShape> shape = Optional.empty();
    private boolean refused;
    private boolean idIsCode;
    private int seen;
    private int leftOut;
    private int notKnown;
    private final Map<String, Integer> strangeKinds = new TreeMap<>();

    /** @param movedAlready whether the reader hands over features in the round's system, as that of GeoJSON does */
    Selection(
            LayerQuery query, SourcePlace file, CoordinateSystem round, boolean movedAlready, Consumer<Feature> sink) {
        this.query = query;
        this.file = file;
        this.round = round;
        this.movedAlready = movedAlready;
        this.sink = sink;
        this.findings = new Findings(file);
    }

    @Override
    public boolean begins(LayerShape layer) {
        findings.addAll(query.mapping().missing(layer, settings("mappings")));
        query.filter().ifPresent(text -> {
            Checked<AttributeFilter> parsed = AttributeFilter.parse(text, layer, settings("filters"));
            findings.addAll(parsed.problems());
            filter = parsed.value();
        });
        LayerShape mapped = query.mapping().apply(layer);
        idIsCode = query.codeColumn()
                .filter(column -> ColumnMapping.column(mapped, column).isEmpty())
                .isPresent();
        into(layer);
        shape = Optional.of(new LayerShape(
                mapped.name(), Optional.of(StatedSystem.code(round.code())), mapped.kind(), mapped.fields()));
        refused = findings.hasErrors();
        return !refused;
    }

    private SourcePlace settings(String key) {
        return query.settings().row(key + "." + query.part());
    }

    private void into(LayerShape layer) {
        if (movedAlready || layer.kind() == LayerShape.Kind.NONE) {
            return;
        }
        Optional<StatedSystem> stated = query.mapping().crs().or(layer::crs).map(StatedSystem::recognised);
        if (stated.isEmpty()) {
            findings.add(SystemNotes.missing(file, query.part(), round));
            return;
        }
        Checked<Reprojection> way = round.from(stated.get(), file);
        findings.addAll(way.problems());
        SystemNotes.note(file, layer.crs().map(StatedSystem::recognised), stated.get(), round)
                .forEach(findings::add);
        into = way.value().map(move -> new IntoRound(round, file, stated.get(), move));
    }

    @Override
    public void take(Feature feature) {
        seen++;
        Truth answer = filter.map(asked -> asked.about(feature)).orElse(Truth.TRUE);
        if (answer != Truth.TRUE) {
            leftOut++;
            notKnown += answer == Truth.UNKNOWN ? 1 : 0;
            return;
        }
        Feature mapped = withCode(query.mapping().apply(feature));
        countStrangeKind(mapped);
        if (into.isEmpty() || mapped.geometry().isEmpty()) {
            sink.accept(mapped);
            return;
        }
        Checked<Feature> moved = into.get().move(mapped);
        findings.addAll(moved.problems());
        moved.value().ifPresent(sink);
    }

    private Feature withCode(Feature feature) {
        if (!idIsCode) {
            return feature;
        }
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        attributes.put(query.codeColumn().orElseThrow(), Attribute.of(feature.id()));
        attributes.putAll(feature.attributes());
        return new Feature(feature.id(), feature.geometry(), attributes);
    }

    private void countStrangeKind(Feature feature) {
        if (query.part().equals("streams")) {
            feature.text(ColumnMapping.KIND)
                    .filter(word -> !LineKind.isKnown(word))
                    .ifPresent(word -> strangeKinds.merge(word, 1, Integer::sum));
        }
    }

    /** What was read, with every problem of this step. */
    Checked<LayerShape> done() {
        if (refused) {
            return Checked.failed(findings.all());
        }
        if (idIsCode) {
            findings.add(Problem.note(
                    "code-from-id",
                    file,
                    "no column holds the " + query.codeColumn().orElseThrow()
                            + "; the file's own id of each feature stands in for it",
                    "",
                    "nothing if that is right; else name the column under mappings." + query.part() + " in "
                            + query.settings().file()));
        }
        if (filter.isPresent() && !findings.hasErrors() && seen > 0) {
            findings.add(filtered());
        }
        strangeKinds.forEach((word, count) -> findings.add(strange(word, count)));
        List<Problem> problems = findings.all();
        return shape.map(layer -> Checked.of(layer, problems)).orElseGet(() -> Checked.failed(problems));
    }

    private Problem filtered() {
        String unknown = notKnown == 0 ? "" : ", " + notKnown + " of them because a value asked for is not known";
        String found = "the filter left out " + leftOut + " of " + seen + " features" + unknown;
        return leftOut == seen
                ? Problem.warning(
                        "filter-leaves-nothing", settings("filters"), found, "", "check the words and numbers in it")
                : Problem.note("filter-left-out", settings("filters"), found, "", "");
    }

    private Problem strange(String word, int count) {
        return Problem.warning(
                "kind-word-unknown",
                file.column(ColumnMapping.KIND),
                "\"" + word + "\" (" + count + (count == 1 ? " feature" : " features")
                        + ") is no kind of line known here",
                LineKind.words(),
                "say what it means: \"kindWords\": {\"" + word + "\": \"stream\"} under mappings." + query.part()
                        + " in " + query.settings().file());
    }
}
