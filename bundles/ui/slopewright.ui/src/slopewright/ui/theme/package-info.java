/** Whether the window is light or dark, for what paints its own colours. */
package slopewright.ui.theme;
