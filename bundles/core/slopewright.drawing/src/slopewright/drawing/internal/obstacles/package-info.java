/** What stands around an aid as plans and sections draw it: everything that was compared, and what could not be. */
package slopewright.drawing.internal.obstacles;
