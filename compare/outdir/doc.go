// Package outdir writes a folder of results whole or not at all, and single
// files in the same manner.
//
// # Protocol
//
// Write works in a hidden sibling of the target, so that everything lies on one
// file system and the last step is a rename:
//
//	results/                       what people see
//	.results.tmp-dhwcompare/lock   held by the run that owns this workspace
//	.results.tmp-dhwcompare/new    the folder being built
//	.results.tmp-dhwcompare/old    the replaced folder, between two renames
//	.results.tmp-dhwcompare/trash  what is being deleted
//
// Its steps:
//
//  1. The target is checked: absent, empty, or holding nothing but files that
//     its own manifest.json lists. Anything else is refused and left alone.
//  2. The lock is taken. The kernel frees it when a run dies however it dies, so
//     a lock that can be taken proves that what lies in the workspace is dead.
//  3. What a dead run left is healed and swept away.
//  4. The files are written to new and synced; manifest.json comes last.
//  5. The target is checked again, and new takes its place.
//  6. The replaced folder and the workspace are deleted.
//
// # Why an exchange
//
// A folder that holds files cannot be replaced by one portable rename. Linux can
// exchange two names in one step (renameat2 with RENAME_EXCHANGE): the target
// name leads to whole results, old or new, at every moment. Where the kernel or
// the file system lacks it, two renames are used, target to old and new to
// target. A kill between those two leaves the target absent and old whole; the
// next run moves it back before it does anything else.
package outdir
