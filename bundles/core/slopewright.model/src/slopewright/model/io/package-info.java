/** Reading and writing of project files: secure, with errors that name the line, and never losing what was there. */
package slopewright.model.io;
