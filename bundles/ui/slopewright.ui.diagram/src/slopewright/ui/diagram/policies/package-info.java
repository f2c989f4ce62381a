/** What parts answer to requests of tools. */
package slopewright.ui.diagram.policies;
