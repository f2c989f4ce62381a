/** Tools and trackers of the mouse and of the keyboard. */
package slopewright.ui.diagram.tools;
