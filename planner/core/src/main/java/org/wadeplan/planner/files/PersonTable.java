package org.wadeplan.planner.files;

import java.util.Collections;
import java.util.LinkedHashSet;
import org.wadeplan.planner.round.Person;

/** {@code people.csv}: who goes out, by what they may do. */
final class PersonTable {

    static final TableKind<Person> KIND = TableKind.named("people", "person")
            .required("person name roles live_circuit driver night_driver")
            .optional("operator_until first_aid_until note")
            .makes(PersonTable::person);

    private PersonTable() {}

    private static Person person(Row row) {
        return new Person(
                row.text("person"),
                row.text("name"),
                Collections.unmodifiableSet(new LinkedHashSet<>(row.list("roles"))),
                row.optionalDate("operator_until"),
                row.optionalDate("first_aid_until"),
                row.flag("live_circuit"),
                row.flag("driver"),
                row.flag("night_driver"),
                row.optionalText("note"));
    }
}
