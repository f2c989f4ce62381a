/** Vertical sections along the approach: beams, obstacle surface, obstacles, glide path and wheels. */
package slopewright.drawing.section;
