package org.warmvat.log;

/**
 * A row as it was read.
 *
 * @param second seconds since 1970 of the logger's clock
 * @param line of the file, counted from 1
 * @param values of the file's columns, in their order; NaN where the cell holds none
 */
@SuppressWarnings("ArrayRecordComponent") // rows are compared by nobody and live only while a file is read
record LogRow(long second, long line, double[] values) {}
