/**
 * The shapes of what documents only describe: jigs, gauges, hubs and models of rods. Most are a {@code Relief}, a plan of
 * areas each with a plane as its top: such bodies stand flat, hang over nowhere and print without supports, and their
 * surfaces are closed and free of self-intersections by construction. Entry type: {@link dev.calotte.stl.body.Bodies}.
 * Knows no file format.
 */
package dev.calotte.stl.body;
