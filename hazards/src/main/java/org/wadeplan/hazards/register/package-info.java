/**
 * The register: what can hurt people in this work, when each hazard applies, what to do and when to stop.
 *
 * <p>A register is data. The shipped one is {@code hazards.json} beside this package; an agency may replace it whole with
 * {@link org.wadeplan.hazards.register.HazardRegister#read}. Every row names its source and version.
 */
@NullMarked
package org.wadeplan.hazards.register;

import org.jspecify.annotations.NullMarked;
