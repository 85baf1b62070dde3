using System.CommandLine;
using System.Globalization;
using GigRig.Benchmarks.Commands;

CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
var root = new RootCommand("Measures the planner: see docs/benchmarks.md.") { SolveCommand.Create(), CompareCommand.Create(), GenerateCommand.Create(), StopCommand.Create(), MemoryCommand.Create(), AgainCommand.Create() };
return root.Parse(args).Invoke();
