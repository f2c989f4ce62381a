/** Neutral scenes in metres, with painters for SVG and DXF. */
package slopewright.drawing;
