package org.wadeplan.planner.pack.page;

/**
 * A run of pages about one thing, starting on a fresh page.
 *
 * @param title what the page is: {@code Visit page}
 * @param subject whom or what it is for, in the header of each of its pages: {@code BRN-01, Mon 6 Sep 2027, crew A}
 * @param authorised false where a permit or consent is awaited: then NOT AUTHORISED goes across each page
 * @param html its body as XHTML
 */
record Section(String title, String subject, boolean authorised, String html) {}
