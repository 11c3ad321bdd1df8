/**
 * Equal things gathered into kinds, marked and counted: {@link dev.calotte.parts.Parts} of a dome holds
 * {@link dev.calotte.parts.StrutKind}, {@link dev.calotte.parts.PanelKind} and {@link dev.calotte.parts.HubKind}, with
 * left and right hands where a thing is not its own mirror image. {@link dev.calotte.parts.Joinery} says how a strut
 * ends before its hub. Knows nothing of the stock that parts are cut from.
 */
package dev.calotte.parts;
