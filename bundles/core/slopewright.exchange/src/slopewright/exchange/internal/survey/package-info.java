/** The formats of survey files, one class each, found as services. */
package slopewright.exchange.internal.survey;
