package org.wadeplan.planner.method;

/**
 * Why a cell cannot be read.
 *
 * @param position of the character where it goes wrong, from 1
 * @param code {@code cell-beyond-unary-test}, say
 * @param found what stands there
 * @param expected what may stand there
 */
public record CellFault(int position, String code, String found, String expected) {}
