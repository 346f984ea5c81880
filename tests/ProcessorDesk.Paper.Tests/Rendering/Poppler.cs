using System.Diagnostics;

namespace ProcessorDesk.Paper.Tests.Rendering;

/// <summary>Runs the poppler tools: a renderer and reader that shares no code with the library that wrote the file.</summary>
internal static class Poppler
{
    /// <summary>Runs a tool that writes a file.</summary>
    public static void Run(string tool, params string[] arguments) => Ask(tool, arguments);

    /// <summary>Runs a tool and gives back what it printed. Any complaint is an error.</summary>
    public static string Ask(string tool, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(tool, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })
            ?? throw new InvalidOperationException($"{tool} did not start.");
        var complaint = process.StandardError.ReadToEndAsync();
        var printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var said = complaint.Result;
        if (process.ExitCode != 0 || said.Length > 0)
            throw new InvalidOperationException($"{tool} ended with {process.ExitCode}: {said}");
        return printed;
    }
}
