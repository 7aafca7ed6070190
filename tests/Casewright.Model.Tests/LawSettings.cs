using System.Runtime.CompilerServices;
using CsCheck;

namespace Casewright.Model.Tests;

/// <summary>How often every law is tried when its test does not say.</summary>
internal static class LawSettings
{
    [ModuleInitializer]
    internal static void Set() => Check.Iter = 5_000;
}
