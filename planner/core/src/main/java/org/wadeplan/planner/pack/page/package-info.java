/**
 * The pages to print: small view records made from the plan, filled into templates, pressed into PDF.
 */
@NullMarked
package org.wadeplan.planner.pack.page;

import org.jspecify.annotations.NullMarked;
