/**
 * What there is to be said of a sheet: findings, which do not keep it from being printed, and troubles, which do. Knows no other
 * room of what is made ready.
 */
package org.adumbrate.prepare.finding;
