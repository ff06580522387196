/**
 * What is looked at before a sheet is printed: each rule is a class that says what it finds, where, why it matters and what to
 * do. Limits stand in the rules, each with its source.
 */
package org.adumbrate.preflight;
