/**
 * Commands, options and messages; nothing is computed here. The only room that knows of the command line and that
 * prints.
 */
package org.adumbrate.cli;
