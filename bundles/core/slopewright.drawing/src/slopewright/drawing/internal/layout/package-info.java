/** Room for the letters of a scene, and what lies inside its frame. */
package slopewright.drawing.internal.layout;
