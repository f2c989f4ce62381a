/** What a drawing consists of before it is painted: marks with their inks, what is drawn of an aid, and the area on paper that it fills. */
package slopewright.drawing.scene;
