/** Sentences as data, a key with typed arguments, and the one renderer that makes words of them in a language. */
package slopewright.messages;
