// Package batch compares many homes: a base case and a table with a row for each
// home go in, a row of results for each comes out.
//
// The work can be stopped at any moment and taken up again, and it can be shared
// among machines that know nothing of each other: finished rows go to a journal at
// once, every row belongs to one part by the hash of its id, and the parts join to
// the very bytes of one run. Memory does not grow with the number of homes but for
// the table itself and some bytes a row.
package batch
