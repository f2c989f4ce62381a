/** What every unit shows into which angle and height. */
package slopewright.drawing.signal;
