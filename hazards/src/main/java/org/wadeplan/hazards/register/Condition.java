package org.wadeplan.hazards.register;

/** One thing a trigger looks at. */
public sealed interface Condition {

    /**
     * Holds where the visit includes the activity. Activities are planned, so this is never unknown.
     *
     * @param activity what people do
     */
    record Doing(Activity activity) implements Condition {}

    /**
     * Holds where a number lies beyond a limit.
     *
     * @param attribute which number, with its unit
     * @param comparison how it is held against the limit
     * @param limit in the attribute's unit
     * @param whenUnknown what an unknown number means
     */
    record Measured(Attribute attribute, Comparison comparison, double limit, WhenUnknown whenUnknown)
            implements Condition {}

    /**
     * Holds where something stands at the site.
     *
     * @param feature kebab-case name, free so that an agency may add its own: {@code dam-upstream}
     * @param whenUnknown what it means that nobody has looked
     */
    record Feature(String feature, WhenUnknown whenUnknown) implements Condition {}
}
