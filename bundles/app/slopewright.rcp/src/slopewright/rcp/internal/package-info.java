/** The application, its perspective and branding. */
package slopewright.rcp.internal;
