package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"
	"syscall"

	"github.com/spf13/cobra"
)

// version is that of the program, raised by hand with each release. It stands in
// no output, so that results do not depend on it.
const version = "0.1.0"

// program is what every command needs of the outside world.
type program struct {
	stdin          io.Reader
	stdout, stderr io.Writer

	referred []string // files that the case refers to, as they were opened
}

// run is the program: it gives the exit code.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	context.AfterFunc(ctx, stop) // a second signal ends the program at once
	p := &program{stdin: stdin, stdout: stdout, stderr: stderr}
	root := p.rootCommand()
	root.SetArgs(args)
	return p.exit(ctx, root.ExecuteContext(ctx))
}

// print writes the bytes that were asked for, unless making them failed.
func (p *program) print(data []byte, err error) error {
	if err == nil {
		_, err = p.stdout.Write(data)
	}
	return err
}

func (p *program) rootCommand() *cobra.Command {
	root := &cobra.Command{
		Use:   "dhwcompare",
		Short: "Compare a compact store with a cylinder for hot water from a heat pump",
		Long: `dhwcompare settles, for one home, whether hot water from a heat pump should come
from a compact store or from a cylinder. It simulates years of both on the same
weather, draw-offs, house and heat pump, and sets them side by side.

Begin with "dhwcompare run", which compares the two for an invented home.`,
		Version:       version,
		SilenceErrors: true,
		SilenceUsage:  true,
		Args:          rootArgs,
		RunE:          func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	root.SetVersionTemplate("{{.Name}} {{.Version}}\n")
	root.SetIn(p.stdin)
	root.SetOut(p.stdout)
	root.SetErr(p.stderr)
	root.SetFlagErrorFunc(flagErrors([]string{"version", "help"}))
	root.AddCommand(p.runCommand(), p.newCommand(), p.checkCommand())
	root.AddCommand(p.studyCommands()...)
	root.AddCommand(p.batchCommand(), p.licencesCommand())
	return root
}

// rootArgs explains a first word that is no command.
func rootArgs(_ *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	e := &usageError{what: fmt.Sprintf("there is no command %q", args[0]), hint: "the commands are " + strings.Join(commandNames(), ", ") + "; see dhwcompare --help"}
	near := nearest(args[0], append(commandNames(), "help", "completion"))
	switch {
	case near != "":
		e.hint = fmt.Sprintf("did you mean dhwcompare %s?", near)
	case isYAML(args[0]):
		e.hint = fmt.Sprintf("did you mean dhwcompare run %s?", args[0])
	}
	return e
}

// commandNames lists the commands, the usual ones first.
func commandNames() []string {
	return []string{"run", "new", "check", "size", "sensitivity", "drawoff", "settings", "batch", "licences"}
}

func isYAML(name string) bool {
	lower := strings.ToLower(name)
	return strings.HasSuffix(lower, ".yaml") || strings.HasSuffix(lower, ".yml")
}
