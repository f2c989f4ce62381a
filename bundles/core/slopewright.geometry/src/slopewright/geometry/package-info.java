/** Immutable geometric values: points, frames, planes, angles, units and surfaces. */
package slopewright.geometry;
