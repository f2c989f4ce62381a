/** Starting the command line on the platform. */
package slopewright.headless.internal;
