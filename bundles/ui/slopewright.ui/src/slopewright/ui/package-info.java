/** Images, preferences, property sheets, document life cycle and background checking. */
package slopewright.ui;
