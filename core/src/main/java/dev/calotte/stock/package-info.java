/**
 * What can be bought: {@link dev.calotte.stock.Stock} is a sheet, a roll, a bar or an irregular outline. It knows nothing of what is cut from
 * it, nor of how that is laid out.
 */
@NullMarked
package dev.calotte.stock;

import org.jspecify.annotations.NullMarked;
