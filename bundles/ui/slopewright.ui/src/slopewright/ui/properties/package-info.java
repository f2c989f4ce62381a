/** The property sheet: attributes of elements with their units, and what follows from them. */
package slopewright.ui.properties;
