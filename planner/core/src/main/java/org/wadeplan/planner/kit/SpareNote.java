package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.List;

/**
 * A kind of which there is enough, and not the spare that the kit needs ask for.
 *
 * @param days the days without a spare, or with too few
 * @param inService how many of the kind may go out at all on the first of them
 * @param found why there is no more, with defect tags; empty where the store simply has no more
 */
public record SpareNote(String kind, List<LocalDate> days, int inService, String found) {}
