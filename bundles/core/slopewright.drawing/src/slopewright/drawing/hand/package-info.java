/** Pictures of what a hand does at a portable unit. */
package slopewright.drawing.hand;
