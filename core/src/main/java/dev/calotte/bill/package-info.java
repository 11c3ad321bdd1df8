/**
 * What a dome takes: {@link dev.calotte.bill.Bill} counts what is bought and what is made of it, with spares and prices;
 * {@link dev.calotte.bill.Masses} weighs what is lifted. Knows no formats.
 */
@NullMarked
package dev.calotte.bill;

import org.jspecify.annotations.NullMarked;
