/** What the user prefers: units shown and the rule set of new projects. */
package slopewright.ui.preferences;
