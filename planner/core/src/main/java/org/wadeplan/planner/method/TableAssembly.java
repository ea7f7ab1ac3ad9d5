package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Makes a {@link DecisionTable} of the elements of one DMN decision, gathering every problem on the way. */
final class TableAssembly {

    /** A name of FEEL without operators in it: letters, digits, underscores and single spaces. */
    private static final Pattern NAME = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*( [\\p{L}\\p{N}_]+)*");

    private final String file;
    private final String hash;
    private final XmlElement decision;
    private final XmlElement table;
    private final ItemTypes types;
    private final List<Problem> problems;

    TableAssembly(String file, String hash, XmlElement decision, ItemTypes types, List<Problem> problemsSoFar) {
        this.file = file;
        this.hash = hash;
        this.decision = decision;
        this.table = decision.child("decisionTable").orElseThrow();
        this.types = types;
        this.problems = new ArrayList<>(problemsSoFar);
    }

    Checked<DecisionTable> assemble() {
        Optional<HitPolicy> policy = hitPolicy();
        List<XmlElement> inputElements = table.children("input").toList();
        List<XmlElement> rows = table.children("rule").toList();
        List<TableOutput> outputs =
                new OutputColumns(file, problems).read(table.children("output").toList());
        List<TableInput> inputs = new ArrayList<>();
        for (int column = 0; column < inputElements.size(); column++) {
            inputs.add(input(inputElements.get(column), column, rows));
        }
        requireSome(inputs, "inputs");
        requireSome(outputs, "outputs");
        requireSome(rows, "rules");
        reportTwins(inputs);
        RuleRows reader = new RuleRows(file, inputs, outputs, problems);
        List<TableRule> rules = reader.read(rows);
        return policy.map(known ->
                        new DecisionTable(file, id(decision), name(), known, List.copyOf(inputs), outputs, rules, hash))
                .map(read -> Checked.of(read, problems).with(OutputColumns.check(read, at(table))))
                .orElseGet(() -> Checked.failed(problems));
    }

    private Optional<HitPolicy> hitPolicy() {
        Optional<String> word = table.attribute("hitPolicy");
        if (word.isEmpty()) {
            problems.add(Problem.note(
                    "hit-policy-missing",
                    at(table),
                    "no hit policy, so UNIQUE holds by the DMN standard: at most one rule may match",
                    "a hit policy that is written down",
                    "write hitPolicy=\"UNIQUE\" if that is meant"));
            return Optional.of(HitPolicy.UNIQUE);
        }
        Optional<HitPolicy> policy = HitPolicy.named(word.get());
        if (policy.isEmpty()) {
            problems.add(Problem.error(
                    "hit-policy-refused",
                    at(table),
                    "the hit policy " + word.get(),
                    HitPolicy.allWords() + ": a site has one method",
                    "rewrite the table so that one rule matches each case"));
        }
        return policy;
    }

    private TableInput input(XmlElement element, int column, List<XmlElement> rows) {
        Optional<XmlElement> expression = element.child("inputExpression");
        String fallback = "input " + (column + 1);
        String name = expression.flatMap(XmlElement::innerText).orElse(fallback);
        if (!NAME.matcher(name).matches()) {
            problems.add(Problem.error(
                    "input-beyond-name",
                    at(element).column(fallback),
                    "the input expression \"" + name + "\"",
                    "the name of one value, such as conductivity_us_cm",
                    "put the sum into the site's own figures and name the value here"));
        }
        ValueType type = type(element, expression, name, column, rows);
        String label = element.attribute("label").orElse(name);
        Optional<String> defined =
                written(expression, name).flatMap(types::named).flatMap(ItemTypes.Item::allowed);
        return new TableInput(id(element), name, label, type, allowed(element, defined, name, type));
    }

    private ValueType type(
            XmlElement element, Optional<XmlElement> expression, String name, int column, List<XmlElement> rows) {
        Optional<String> written = written(expression, name);
        ValueType guess = RuleRows.guessType(rows, column);
        if (written.isEmpty()) {
            problems.add(Problem.note(
                    "input-type-missing",
                    at(element).column(name),
                    "no type; read as " + guess.word() + " from the cells below",
                    "number, string or boolean",
                    "write typeRef=\"" + guess.word() + "\" if that is meant"));
            return guess;
        }
        Optional<ValueType> type = types.named(written.get()).map(ItemTypes.Item::type);
        if (type.isEmpty()) {
            problems.add(Problem.error(
                    "input-type-refused",
                    at(element).column(name),
                    "the type " + written.get(),
                    "number, string or boolean, or a type that the file defines from one of these",
                    "give the input one of these types"));
        }
        return type.orElse(guess);
    }

    /** The type at the column, else at the input data of that name. */
    private Optional<String> written(Optional<XmlElement> expression, String name) {
        return expression.flatMap(inner -> inner.attribute("typeRef")).or(() -> types.ofInputData(name));
    }

    private Optional<TableCell> allowed(XmlElement input, Optional<String> defined, String name, ValueType type) {
        Optional<String> text = input.child("inputValues")
                .flatMap(XmlElement::innerText)
                .filter(values -> !values.isEmpty())
                .or(() -> defined);
        return text.flatMap(values -> new CellReading(file, problems)
                .read(values, type, at(input).row("allowed values").column(name)));
    }

    private void requireSome(List<?> parts, String what) {
        if (parts.isEmpty()) {
            problems.add(Problem.error(
                    "dmn-table-empty",
                    at(table),
                    "the table has no " + what,
                    "at least one",
                    "add it, and save again"));
        }
    }

    private void reportTwins(List<TableInput> inputs) {
        Set<String> seen = new HashSet<>();
        for (TableInput input : inputs) {
            if (!seen.add(input.name())) {
                problems.add(Problem.error(
                        "input-twice",
                        at(table).column(input.name()),
                        "two columns look at " + input.name(),
                        "one column for each value",
                        "join the two columns"));
            }
        }
    }

    private String name() {
        return decision.attribute("name")
                .or(() -> table.attribute("outputLabel"))
                .orElse(file);
    }

    private static String id(XmlElement element) {
        return element.attribute("id").orElse("");
    }

    private SourcePlace at(XmlElement element) {
        return SourcePlace.line(file, element.line());
    }
}
