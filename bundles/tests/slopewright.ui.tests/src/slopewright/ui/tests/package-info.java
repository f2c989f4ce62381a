/** Tests of the workbench parts on a real display. */
package slopewright.ui.tests;
