using System.Reflection;
using System.Runtime.CompilerServices;
using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>What the domain's types look like: closed, unchangeable, whole numbers.</summary>
public sealed class ShapeOfTheDomainTests
{
    private const BindingFlags Everything = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Type[] DomainTypes = [.. OurAssemblies.Domain.GetTypes().Where(type => type.GetCustomAttribute<CompilerGeneratedAttribute>() is null && type.Namespace?.StartsWith("GigRig.", StringComparison.Ordinal) == true)];

    [Fact]
    public void A_class_is_sealed_abstract_or_static() =>
        Offenders.None(DomainTypes.Where(type => type is { IsClass: true, IsSealed: false, IsAbstract: false }).Select(type => type.FullName));

    [Fact]
    public void Nothing_can_be_changed_once_it_is_made() =>
        Offenders.None(
            from type in DomainTypes
            from property in type.GetProperties(Everything)
            where property.SetMethod is { IsPublic: true } setter && !IsInit(setter)
            select $"{type.FullName}.{property.Name}");

    [Fact]
    public void No_field_is_open_to_the_world() =>
        Offenders.None(
            from type in DomainTypes.Where(type => !type.IsEnum)
            from field in type.GetFields(Everything)
            where field is { IsPublic: true, IsLiteral: false }
            select $"{type.FullName}.{field.Name}");

    // What decides whether a rig fits and is fed is whole numbers; only the physics on the sheets takes roots and logarithms.
    [Fact]
    public void No_number_is_binary_floating_point_outside_the_formulas() =>
        Offenders.None(
            from type in DomainTypes.Where(type => type.Namespace != "GigRig.Domain.Formulas")
            from used in type.GetFields(Everything).Select(field => (field.Name, Type: field.FieldType))
                .Concat(type.GetProperties(Everything).Select(property => (property.Name, Type: property.PropertyType)))
                .Concat(type.GetMethods(Everything).SelectMany(method => method.GetParameters().Select(p => p.ParameterType).Append(method.ReturnType).Select(t => (method.Name, Type: t))))
            where used.Type == typeof(float) || used.Type == typeof(double) || used.Type == typeof(float?) || used.Type == typeof(double?)
            select $"{type.FullName}.{used.Name}");

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
}
