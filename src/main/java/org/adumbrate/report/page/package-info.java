/**
 * The report of a build: one page for a browser that holds all that it shows and asks the network for nothing. Knows values
 * only; where they come from is not known here.
 */
package org.adumbrate.report.page;
