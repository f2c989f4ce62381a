/** Helpers shared by the test bundles. */
package slopewright.testkit;
