/**
 * Equal things gathered into kinds, marked and counted: {@link dev.calotte.parts.Parts} of a dome holds
 * {@link dev.calotte.parts.StrutKind}, {@link dev.calotte.parts.PanelKind} and {@link dev.calotte.parts.HubKind}, with
 * left and right hands where a thing is not its own mirror image. {@link dev.calotte.parts.Joinery} says how struts meet
 * hubs, and from it follow the cuts of their ends, the {@link dev.calotte.parts.RailKind} of mitred frames, the
 * {@link dev.calotte.parts.PlateArms} of hub plates and their {@link dev.calotte.parts.BoltStack}. Knows nothing of the
 * stock that parts are cut from.
 */
@NullMarked
package dev.calotte.parts;

import org.jspecify.annotations.NullMarked;
