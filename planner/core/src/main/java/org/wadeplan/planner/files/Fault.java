package org.wadeplan.planner.files;

/** What is wrong with one cell or one value, without the place where it stands. */
record Fault(String code, String found, String expected, String remedy) {

    /** For a cell that may be blank: a word in place of a number usually stands for "not known". */
    Fault orBlank() {
        boolean noNumber = code.equals("not-a-number") || code.equals("not-finite");
        return noNumber
                ? new Fault(code, found, expected, remedy + ", or leave the cell blank where it is not known")
                : this;
    }
}
