package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"gopkg.in/yaml.v3"
)

// script is something that a reader of the README runs.
type script struct {
	text string
	env  []string // set by a scheduler
}

// scripts gives what the README's blocks run, in order: the commands, and of the
// manifests for clusters what they run on each machine.
func scripts(t *testing.T) []script {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(repository, "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	var list []script
	jobs := 0
	for _, m := range regexp.MustCompile("(?ms)^```(sh|bash|yml)\n(.*?)^```$").FindAllStringSubmatch(string(text), -1) {
		switch language, block := m[1], m[2]; language {
		case "sh":
			list = append(list, script{text: block})
		case "bash":
			jobs++
			list = append(list, slurmTasks(t, block)...)
		case "yml":
			jobs++
			list = append(list, indexedPods(t, block)...)
		}
	}
	if jobs != 2 {
		t.Errorf("the README has %d manifests, want 2", jobs)
	}
	return list
}

// slurmTasks gives what an array job runs.
func slurmTasks(t *testing.T, block string) []script {
	t.Helper()
	array := regexp.MustCompile(`(?m)^#SBATCH --array=1-([0-9]+)$`).FindStringSubmatch(block)
	if array == nil || !strings.HasPrefix(block, "#!/bin/sh\n") {
		t.Fatalf("no array job:\n%s", block)
	}
	return tasks(t, block, array[1], "SLURM_ARRAY_TASK_ID", 1)
}

// indexedPods gives what an indexed Job runs.
func indexedPods(t *testing.T, block string) []script {
	t.Helper()
	var job struct {
		Kind string
		Spec struct {
			CompletionMode string `yaml:"completionMode"`
			Completions    string
			Template       struct {
				Spec struct {
					Containers []struct{ Command, Args []string }
				}
			}
		}
	}
	if err := yaml.NewDecoder(bytes.NewReader([]byte(block))).Decode(&job); err != nil {
		t.Fatal(err)
	}
	pods := job.Spec.Template.Spec.Containers
	if job.Kind != "Job" || job.Spec.CompletionMode != "Indexed" || len(pods) != 1 || strings.Join(pods[0].Command, " ") != "sh -c" || len(pods[0].Args) != 1 {
		t.Fatalf("no indexed Job of one container that runs a shell:\n%s", block)
	}
	return tasks(t, pods[0].Args[0], job.Spec.Completions, "JOB_COMPLETION_INDEX", 0)
}

// tasks gives one script for each index, of which there are as many as parts.
func tasks(t *testing.T, text, count, variable string, first int) []script {
	t.Helper()
	if !strings.Contains(text, fmt.Sprintf("--part \"$part/%s\"", count)) {
		t.Errorf("the job runs %s tasks, but divides otherwise:\n%s", count, text)
	}
	var n int
	if _, err := fmt.Sscan(count, &n); err != nil {
		t.Fatal(err)
	}
	var list []script
	for i := range n {
		list = append(list, script{text, []string{fmt.Sprintf("%s=%d", variable, first+i)}})
	}
	return list
}
