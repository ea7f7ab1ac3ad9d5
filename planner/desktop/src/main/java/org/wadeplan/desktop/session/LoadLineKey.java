package org.wadeplan.desktop.session;

import java.time.LocalDate;

/**
 * One thing on the load list of a crew-day.
 *
 * @param item serial or kit set; the kind, for what is counted out and has no serial
 */
public record LoadLineKey(LocalDate date, String crew, String item) {}
