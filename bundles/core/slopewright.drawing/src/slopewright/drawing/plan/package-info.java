/** Plans of an approach aid with what lies and stands around it, and their place on the grid of the aerodrome. */
package slopewright.drawing.plan;
