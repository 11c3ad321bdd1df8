/**
 * The usual cautions: {@link dev.calotte.caution.Cautions} chooses those that concern a dome. This library computes
 * geometry and quantities; on strength, loads and fire it defers to local codes and licensed practice.
 */
@NullMarked
package dev.calotte.caution;

import org.jspecify.annotations.NullMarked;
