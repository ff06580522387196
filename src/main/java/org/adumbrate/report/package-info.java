/**
 * Gathers what the report of a sheet shows. What the page looks like is the inner room's.
 */
package org.adumbrate.report;
