package org.wadeplan.planner.week.search;

import java.util.List;
import org.wadeplan.planner.round.StoreItem;

/** A kind of item that needs a certificate, with the serials of the store that are in service. */
record CertifiedKind(String kind, String certificate, List<StoreItem> items) {}
