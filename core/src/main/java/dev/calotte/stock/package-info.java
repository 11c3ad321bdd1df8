/**
 * What can be bought: {@link dev.calotte.stock.Stock} is a sheet, a roll or a bar. It knows nothing of what is cut from
 * it, nor of how that is laid out.
 */
package dev.calotte.stock;
