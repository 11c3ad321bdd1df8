/**
 * The finished geometry of a dome: {@link dev.calotte.dome.Dome} from a {@link dev.calotte.dome.DomeSpec}, with every
 * {@link dev.calotte.dome.Hub}, {@link dev.calotte.dome.Strut} and {@link dev.calotte.dome.Panel} and the angles
 * between them. Lengths are millimetres, angles radians; z points up, the centre of the sphere is the origin and the
 * x axis is the start ray. Knows nothing of stock, prices or how pieces are joined.
 */
@NullMarked
package dev.calotte.dome;

import org.jspecify.annotations.NullMarked;
