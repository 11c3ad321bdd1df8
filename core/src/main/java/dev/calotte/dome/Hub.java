package dev.calotte.dome;

import dev.calotte.sphere.Site;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A point where struts meet.
 *
 * @param index its place among the dome's hubs: by row, then by place
 * @param position where it is, in millimetres from the centre of the sphere
 * @param site where it lies on the solid
 * @param row how many struts lie between it and the crown, from 0
 * @param place its place in the row from 1, counter-clockwise from the start ray seen from above
 * @param open whether it lies on the base ring
 */
public record Hub(int index, Vector3D position, Site site, int row, int place, boolean open) {}
