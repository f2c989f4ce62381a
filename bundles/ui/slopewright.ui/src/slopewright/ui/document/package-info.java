/** The life cycle of a project in the window: from the file to the editor and back. */
package slopewright.ui.document;
