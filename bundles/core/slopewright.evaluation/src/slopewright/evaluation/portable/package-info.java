/** A portable unit at a landing site: slope, azimuth, sight lines, battery. */
package slopewright.evaluation.portable;
