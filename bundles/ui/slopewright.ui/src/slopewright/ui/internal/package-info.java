/** Background checking, recovery files and contributions to the workbench. */
package slopewright.ui.internal;
