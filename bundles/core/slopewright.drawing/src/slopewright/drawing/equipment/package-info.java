/** Drawings of the equipment of an aid: how its units stand, and the light that they give. */
package slopewright.drawing.equipment;
