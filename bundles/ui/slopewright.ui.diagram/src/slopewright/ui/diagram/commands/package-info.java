/** Commands that hand edits to the history of a project. */
package slopewright.ui.diagram.commands;
