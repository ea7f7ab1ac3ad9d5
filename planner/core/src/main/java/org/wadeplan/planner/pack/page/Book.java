package org.wadeplan.planner.pack.page;

import java.time.Instant;
import java.util.List;

/**
 * Sections bound into one PDF.
 *
 * @param title the document's title
 * @param footer left end of each page's foot: the round and the version of the plan
 * @param madeAt when the pack is made; the PDF's own date
 * @param madeAtWords the same in the round's zone, for the foot of each page
 */
record Book(String title, String footer, Instant madeAt, String madeAtWords, List<Section> sections) {}
