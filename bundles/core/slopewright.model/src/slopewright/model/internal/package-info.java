/** How project files are parsed and written. */
package slopewright.model.internal;
