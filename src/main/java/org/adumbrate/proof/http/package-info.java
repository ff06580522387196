/**
 * A web server for one person on one machine: who may come in, what is asked and what is answered. What is served is not known
 * here; nothing is read or answered before whoever asks has been let in.
 */
package org.adumbrate.proof.http;
