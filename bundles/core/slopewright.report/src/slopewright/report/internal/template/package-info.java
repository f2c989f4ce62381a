/** What is around the content of a document: the built-in template, templates of users and what they may hold, head and running lines. */
package slopewright.report.internal.template;
