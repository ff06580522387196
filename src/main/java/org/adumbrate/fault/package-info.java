/**
 * What a person at the drawing desk is told when something cannot be done: which file, what is wrong with it, what to do.
 * Every room may throw these; nothing else lives here, and nothing here depends on another package.
 */
package org.adumbrate.fault;
