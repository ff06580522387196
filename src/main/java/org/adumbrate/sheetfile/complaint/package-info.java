/**
 * What is wrong with a sheet file and where: complaints with line and column, worded for the desk.
 * Nothing here knows YAML's grammar or the keys.
 */
package org.adumbrate.sheetfile.complaint;
